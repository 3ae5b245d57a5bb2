BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
}

Describe 'Set-LayerStatus' {
    BeforeEach {
        $folder = (New-Item -ItemType Directory -Path (Join-Path $TestDrive ([guid]::NewGuid()))).FullName
        $path = Copy-Fixture groups-nested (Join-Path $folder 'hero.psd')
        $file = Get-LayerFile $path
        $ledger = Join-Path $folder 'hero.layerledger.json'
    }

    It 'makes a ledger, sets state, note and author, passes the file on and leaves it alone' {
        $hash = (Get-FileHash -LiteralPath $path).Hash
        $out = $file | Set-LayerStatus Done 'hem is right' -Name Body -Who anna
        [object]::ReferenceEquals($out, $file) | Should -BeTrue
        $out.PendingCount | Should -Be 0
        (Get-FileHash -LiteralPath $path).Hash | Should -Be $hash
        $status = $file | Get-LayerStatus -Ledger -Name Body
        "$($status.State) $($status.Note) $($status.Who) $($status.MatchedBy) $($status.Done)" | Should -Be 'Done hem is right anna Path True'
        ([datetime]::UtcNow - $status.When).TotalMinutes | Should -BeLessThan 5
        ($file | Get-LayerStatus -Ledger | Where-Object State -EQ Open).Count | Should -Be 3
    }

    It 'keeps what is not said' {
        $file | Set-LayerStatus Done 'hem' -Name Body -Who anna > $null
        $file | Set-LayerStatus -Note 'hem again' -Name Body -Who ben > $null
        $status = $file | Get-LayerStatus -Ledger -Name Body
        "$($status.State) $($status.Note) $($status.Who)" | Should -Be 'Done hem again ben'
        $file | Set-LayerStatus Recheck -Name Body > $null
        ($file | Get-LayerStatus -Ledger -Name Body).Note | Should -Be 'hem again'
        $file | Set-LayerStatus -Note '' -Name Body > $null
        $status = $file | Get-LayerStatus -Ledger -Name Body
        "$($status.State)/$($status.Note)" | Should -Be 'Recheck/'
    }

    It 'takes layers, groups standing for what is in them, and passes them on in their order' {
        $layers = $file | Get-Layer -LayerNumber 7, 8 | Sort-Object LayerNumber -Descending
        ($layers | Set-LayerStatus Done).LayerNumber | Should -Be 8, 7
        $file | Get-Layer -LiteralLayerPath Figure/Head | Set-LayerStatus Recheck > $null
        ($file | Get-LayerStatus -Ledger | ForEach-Object { "$($_.Name) $($_.State)" }) | Should -Be 'Arm L Open', 'Eye L Recheck', 'Head Recheck', 'Body Done'
    }

    It 'writes nothing with -WhatIf, and asks with -Confirm' {
        $file | Set-LayerStatus Done -WhatIf > $null
        $ledger | Should -Not -Exist
        (Get-Command Set-LayerStatus).Parameters.Keys | Should -Contain 'Confirm'
    }

    It 'needs something to set, of what there is' {
        { $file | Set-LayerStatus } | Should -Throw '*-State or -Note*'
        { $file | Set-LayerStatus Missing } | Should -Throw
        $result = Get-Streams { $file | Rename-Layer -Name Body -NewName backdrop | Set-LayerStatus Done -Name backdrop }
        "$($result.Warnings)" | Should -BeLike '*None of the layers is a part*'
        $ledger | Should -Not -Exist
    }
}
