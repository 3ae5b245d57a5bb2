BeforeAll {
    Import-Module "$PSScriptRoot/Support/Samples.psm1" -Force
    $ErrorActionPreference = 'Continue'
}

Describe 'New-LayerProfile' {
    BeforeEach {
        $folder = Join-Path $TestDrive ([guid]::NewGuid())
        Copy-Fixture groups-nested (Join-Path $folder 'hero.psd') > $null
        Copy-Fixture canvas-odd-width (Join-Path $folder 'odd.psd') > $null
        Push-Location -LiteralPath $folder
    }

    AfterEach { Pop-Location }

    It 'writes what a file shows, and tells what it does not' {
        $file = Get-LayerFile hero.psd
        $result = Get-Streams { New-LayerProfile hero.psd ours.layerprofile.json -Verbose }
        $profile = $result.Output[0]
        "$($profile.Name) $($profile.Canvas.Width) $($profile.Canvas.Height)" | Should -Be "ours $($file.Width) $($file.Height)"
        $profile.Path | Should -Be (Join-Path $folder 'ours.layerprofile.json')
        $result.Verbose -like 'Canvas: width*' | Should -Not -BeNullOrEmpty
        $result.Warnings -like '*no file shows them*' | Should -Not -BeNullOrEmpty
        Test-LayerProfile ours.layerprofile.json -Quiet | Should -BeTrue
        (Get-LayerProfile ours.layerprofile.json).Canvas | Should -Be $profile.Canvas
    }

    It 'sees pending edits of files from the pipeline' {
        $profile = Get-LayerFile hero.psd | Set-LayerCanvas -Width 640 -Height 480 | New-LayerProfile -WarningAction Ignore
        "$($profile.Name) $($profile.Canvas.Width)" | Should -Be 'hero 640'
    }

    It 'writes a start where there is no file, and the schema beside it' {
        $profile = New-LayerProfile -Profile figure-ja -Name studio
        $profile.Naming.Language | Should -Be 'Japanese'
        (Get-ChildItem *.json).Name | Sort-Object | Should -Be 'layerprofile.schema.json', 'studio.layerprofile.json'
        (Get-Content studio.layerprofile.json -Raw | ConvertFrom-Json).'$schema' | Should -Be 'layerprofile.schema.json'
    }

    It 'never writes over a file without -Force' {
        'mine' | Set-Content x.layerprofile.json
        $result = Get-Streams { New-LayerProfile -Destination x.layerprofile.json }
        $result.Errors[0].FullyQualifiedErrorId | Should -BeLike 'DestinationExists,*'
        Get-Content x.layerprofile.json | Should -Be 'mine'
        (New-LayerProfile -Destination x.layerprofile.json -Force).Name | Should -Be 'x'
    }

    It 'writes nothing with -WhatIf' {
        New-LayerProfile hero.psd -WhatIf | Should -BeNullOrEmpty
        Get-ChildItem *.json | Should -BeNullOrEmpty
    }

    It 'writes nothing when a file cannot be read' {
        'no layers' | Set-Content broken.psd
        $result = Get-Streams { New-LayerProfile hero.psd, broken.psd }
        $result.Output | Should -BeNullOrEmpty
        $result.Errors.Count | Should -Be 1
        Get-ChildItem *.json | Should -BeNullOrEmpty
    }

    It 'refuses <Id>' -ForEach @(
        @{ Id = 'NotAProfileName'; Arguments = @{ Destination = 'ours.json' } }
        @{ Id = 'NotAProfileName'; Arguments = @{ Destination = '.layerprofile.json' } }
        @{ Id = 'NothingToLearnFrom'; Arguments = @{ FromFile = 'none*.psd' } }
        @{ Id = 'PathNotFound'; Arguments = @{ FromFile = 'none.psd' } }
        @{ Id = 'NotALayerFile'; Arguments = @{ FromFile = 42 } }
    ) {
        $result = Get-Streams { New-LayerProfile @Arguments }
        $result.Output | Should -BeNullOrEmpty
        $result.Errors[0].FullyQualifiedErrorId | Should -BeLike "$Id,*"
        Get-ChildItem *.json | Should -BeNullOrEmpty
    }

    It 'leaves open what several files do not share' {
        $profile = New-LayerProfile *.psd -Name both -WarningAction Ignore
        $profile.Canvas.EvenWidth | Should -BeFalse
        $profile.Canvas.Width | Should -BeNullOrEmpty
    }
}
