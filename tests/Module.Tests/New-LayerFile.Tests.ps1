BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
    Push-Location -LiteralPath $TestDrive
}

AfterAll { Pop-Location }

Describe 'New-LayerFile' {
    It 'writes a file of the usual size at once, with a backdrop and a centre guide' {
        $file = New-LayerFile hero.psd
        Test-Path -LiteralPath hero.psd | Should -BeTrue
        "$($file.Width) $($file.Height) $($file.Ppi) $($file.Axis)" | Should -Be '5000 6000 600 2500'
        $file.PendingCount | Should -Be 0
        $file.Guides | ForEach-Object { "$($_.IsVertical) $($_.Position)" } | Should -Be 'True 2500'
        $backdrop = $file | Get-Layer
        $backdrop.Kind | Should -Be 'Pixel'
        "$($backdrop.Left) $($backdrop.Top) $($backdrop.Width) $($backdrop.Height)" | Should -Be '0 0 5000 6000'
    }

    It 'takes size, resolution and colour' {
        $file = New-LayerFile small.psd -Width 40 -Height 30 -Ppi 150 -Backdrop '#abc'
        "$($file.Width) $($file.Height) $($file.Ppi)" | Should -Be '40 30 150'
        { New-LayerFile other.psd -Backdrop grey } | Should -Throw "*'grey' is no colour*#rrggbb*"
        Test-Path other.psd | Should -BeFalse
    }

    It 'writes PSB where the name says so' {
        (New-LayerFile large.psb -Width 40 -Height 30).Format | Should -Be 'Psb'
    }

    It 'refuses <Id>' -ForEach @(
        @{ Id = 'NotALayeredName'; Arguments = @{ Path = 'hero.txt' } }
        @{ Id = 'NotALayeredName'; Arguments = @{ Path = 'hero2' } }
        @{ Id = 'TooLargeForPsd'; Arguments = @{ Path = 'wide.psd'; Width = 30001; Height = 1 } }
        @{ Id = 'NotAFilePath'; Arguments = @{ Path = 'env:hero.psd' } }
    ) {
        $result = Get-Streams { New-LayerFile @Arguments }
        $result.Output | Should -BeNullOrEmpty
        $result.Errors[0].FullyQualifiedErrorId | Should -BeLike "$Id,*"
    }

    It 'adds groups from head to toe' {
        $groups = New-LayerFile skeleton.psd -Width 40 -Height 30 -Skeleton | Get-Layer -Kind Group
        $groups.Count | Should -BeGreaterThan 5
        @($groups | Where-Object Side -EQ Left).Count | Should -Be @($groups | Where-Object Side -EQ Right).Count
    }

    It 'warns about an odd width' {
        $result = Get-Streams { New-LayerFile odd.psd -Width 41 -Height 30 }
        $result.Warnings | Should -BeLike '*odd*x = 20.5*'
        $result.Output.Axis | Should -Be 20.5
    }

    It 'never writes over an existing file' {
        Set-Content there.psd 'mine'
        $result = Get-Streams { New-LayerFile there.psd -Width 40 -Height 30 }
        $result.Errors.Count | Should -Be 1
        $result.Output | Should -BeNullOrEmpty
        Get-Content there.psd | Should -Be 'mine'
    }

    It 'writes nothing with -WhatIf' {
        New-LayerFile not.psd -WhatIf
        Test-Path not.psd | Should -BeFalse
    }

    It 'takes its path literally' {
        (New-LayerFile 'b[1].psd' -Width 40 -Height 30).Name | Should -Be 'b[1].psd'
    }
}
